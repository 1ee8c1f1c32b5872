import { UnsentScreen } from '@/components/tree/UnsentScreen'

export default function UnsentPage() {
  return <UnsentScreen />
}
