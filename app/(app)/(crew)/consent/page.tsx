import { ConsentScreen } from '@/components/ready/ConsentScreen'

export default function ConsentPage() {
  return <ConsentScreen />
}
