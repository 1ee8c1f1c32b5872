import { FinishScreen } from '@/components/tree/FinishScreen'
import { treeNumber } from '@/components/tree/tree-number'

type FinishPageProps = { params: Promise<{ no: string }> }

export default async function FinishPage({ params }: FinishPageProps) {
  const { no } = await params
  return <FinishScreen no={treeNumber(no)} />
}
