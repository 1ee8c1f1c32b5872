import { notFound } from 'next/navigation'

import { screenNameAt } from '@/components/screens/screen-paths'

type ScreenPageProps = { params: Promise<{ path?: string[] }> }

/** The address of a screen, which the layout shows; there is nothing at any other. */
export default async function ScreenPage({ params }: ScreenPageProps) {
  const { path = [] } = await params
  if (screenNameAt(`/${path.join('/')}`) === undefined) notFound()
  return null
}
