import { BreakScreen } from '@/components/day/BreakScreen'

export default function BreakPage() {
  return <BreakScreen />
}
