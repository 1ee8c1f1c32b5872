import { ReadyScreen } from '@/components/ready/ReadyScreen'

export default function ReadyPage() {
  return <ReadyScreen />
}
