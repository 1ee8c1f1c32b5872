import { ShiftScreen } from '@/components/shift/ShiftScreen'

export default function ShiftPage() {
  return <ShiftScreen />
}
