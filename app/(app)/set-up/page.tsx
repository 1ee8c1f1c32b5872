import { SetUpScreen } from '@/components/join/SetUpScreen'

export default function SetUpPage() {
  return <SetUpScreen />
}
