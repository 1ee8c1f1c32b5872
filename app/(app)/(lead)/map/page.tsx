import { MapScreen } from '@/components/crew/MapScreen'

type MapPageProps = { searchParams: Promise<{ tree?: string }> }

export default async function MapPage({ searchParams }: MapPageProps) {
  const { tree } = await searchParams
  const no = Number(tree)
  return <MapScreen tree={Number.isInteger(no) && no > 0 ? no : null} />
}
