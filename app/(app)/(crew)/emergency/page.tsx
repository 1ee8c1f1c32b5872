import { EmergencyScreen } from '@/components/day/EmergencyScreen'

export default function EmergencyPage() {
  return <EmergencyScreen />
}
