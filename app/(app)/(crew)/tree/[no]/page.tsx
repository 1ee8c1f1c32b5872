import { TreeScreen } from '@/components/tree/TreeScreen'
import { treeNumber } from '@/components/tree/tree-number'

type TreePageProps = { params: Promise<{ no: string }> }

export default async function TreePage({ params }: TreePageProps) {
  const { no } = await params
  return <TreeScreen no={treeNumber(no)} />
}
