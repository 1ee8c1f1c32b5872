import { HomeScreen } from '@/components/join/HomeScreen'

export default function HomePage() {
  return <HomeScreen />
}
