import { HalfDoneScreen } from '@/components/tree/HalfDoneScreen'
import { treeNumber } from '@/components/tree/tree-number'

type HalfDonePageProps = { params: Promise<{ no: string }> }

export default async function HalfDonePage({ params }: HalfDonePageProps) {
  const { no } = await params
  return <HalfDoneScreen no={treeNumber(no)} />
}
