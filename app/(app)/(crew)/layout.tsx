import type { ReactNode } from 'react'

import { CrewGate } from '@/components/layout/CrewGate'
import '@/components/tree/tree.css'

/** Screens for people of the crew only. */
export default function CrewLayout({ children }: { children: ReactNode }) {
  return <CrewGate>{children}</CrewGate>
}
