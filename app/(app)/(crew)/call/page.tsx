import { CallLeadScreen } from '@/components/day/CallLeadScreen'

export default function CallLeadPage() {
  return <CallLeadScreen />
}
