import { StopWorkScreen } from '@/components/day/StopWorkScreen'

export default function StopWorkPage() {
  return <StopWorkScreen />
}
