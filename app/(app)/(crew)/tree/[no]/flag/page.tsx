import { FlagScreen } from '@/components/tree/FlagScreen'
import { treeNumber } from '@/components/tree/tree-number'

type FlagTreePageProps = { params: Promise<{ no: string }> }

export default async function FlagTreePage({ params }: FlagTreePageProps) {
  const { no } = await params
  return <FlagScreen no={treeNumber(no)} />
}
