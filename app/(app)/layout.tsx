import type { ReactNode } from 'react'

import { AppProviders } from '@/components/layout/AppProviders'
import { requestLanguage } from '@/components/layout/request-language'
import { Screens } from '@/components/screens/Screens'

/** Every screen that knows the orchard, or is about to. */
export default async function AppLayout({ children }: { children: ReactNode }) {
  return (
    <AppProviders language={await requestLanguage()}>
      <Screens>{children}</Screens>
    </AppProviders>
  )
}
