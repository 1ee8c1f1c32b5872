import { BriefingScreen } from '@/components/ready/BriefingScreen'

export default function BriefingPage() {
  return <BriefingScreen />
}
