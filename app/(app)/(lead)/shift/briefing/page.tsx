import { GiveBriefingScreen } from '@/components/shift/GiveBriefingScreen'

export default function GiveBriefingPage() {
  return <GiveBriefingScreen />
}
