'use client'

import { useState } from 'react'

import { type Sent, useRowcall } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useGo } from '../layout/use-go'
import { forgetCode } from './use-code'

type Wish = Parameters<ReturnType<typeof useRowcall>['redeem']>[0]

/** Redeems a code and goes on into the crew. */
export function useGettingIn() {
  const go = useGo()
  const { redeem } = useRowcall()
  const [isAsking, setIsAsking] = useState(false)
  const [sent, setSent] = useState<Sent | null>(null)

  return {
    isAsking,
    sent,
    getIn: async (wish: Wish) => {
      if (isAsking) return
      setIsAsking(true)
      const answer = await redeem(wish)
      setSent(answer)
      setIsAsking(false)
      if (answer.state !== 'accepted') return
      forgetCode()
      go.replace(routes.home())
    },
  }
}
