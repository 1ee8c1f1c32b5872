import { WhichTreeScreen } from '@/components/tree/WhichTreeScreen'

export default function FlagPage() {
  return <WhichTreeScreen />
}
