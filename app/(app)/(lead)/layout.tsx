import type { ReactNode } from 'react'

import { LeadGate } from '@/components/crew/LeadGate'

/** Screens for leads and managers only. */
export default function LeadLayout({ children }: { children: ReactNode }) {
  return <LeadGate>{children}</LeadGate>
}
