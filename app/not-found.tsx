import { NotFound } from '@/components/layout/NotFound'
import { requestLanguage } from '@/components/layout/request-language'

export default async function NotFoundPage() {
  return <NotFound language={await requestLanguage()} />
}
