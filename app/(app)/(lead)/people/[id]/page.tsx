import { PersonScreen } from '@/components/crew/PersonScreen'

type PersonPageProps = { params: Promise<{ id: string }> }

export default async function PersonPage({ params }: PersonPageProps) {
  const { id } = await params
  return <PersonScreen id={id} />
}
