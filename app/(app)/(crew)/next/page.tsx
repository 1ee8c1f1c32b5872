import { NextTreeScreen } from '@/components/tree/NextTreeScreen'
import { treeNumber } from '@/components/tree/tree-number'

type NextPageProps = { searchParams: Promise<{ tree?: string | string[] }> }

export default async function NextPage({ searchParams }: NextPageProps) {
  const { tree } = await searchParams
  return <NextTreeScreen asked={treeNumber(tree)} />
}
