'use client'

import { WentWrong } from '@/components/layout/WentWrong'

type ErrorPageProps = {
  error: Error & { digest?: string }
  reset: () => void
}

/** A screen that broke. The language stands on the page already. */
export default function ErrorPage({ error, reset }: ErrorPageProps) {
  const language = document.documentElement.lang === 'es' ? 'es' : 'en'
  return <WentWrong language={language} digest={error.digest} onAgain={reset} />
}
