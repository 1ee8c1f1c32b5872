import { PeopleScreen } from '@/components/crew/PeopleScreen'

export default function PeoplePage() {
  return <PeopleScreen />
}
