import { JoinScreen } from '@/components/join/JoinScreen'

export default function JoinPage() {
  return <JoinScreen />
}
