'use client'

import { equipmentFor } from '@/lib/domain/safety/equipment'
import { useDraft, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { AskedNote } from './AskedNote'
import { FaultTicks } from './FaultTicks'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type CheckProtectionProps = {
  open: boolean
  id: string
  name: string
  onClose: () => void
}

const nothing: string[] = []

/** What they wear, looked at by the lead. A fault is put down, and they wait until it is mended. */
export function CheckProtection({ open, id, name, onClose }: CheckProtectionProps) {
  const { common, tools } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const draft = useDraft(`protection|${id}`, nothing)
  const { asked, ask } = useAsk()
  const failedItems = draft.value

  const check = () =>
    ask(send('check_equipment', { failedItems }, { personId: id }), () => {
      void draft.writeNow(nothing)
      onClose()
    })
  return (
    <Dialog open={open} title={text.protectionTitle} onClose={onClose} closeLabel={common.close}>
      <p className="small">{text.protectionNote}</p>
      <FaultTicks
        label={name}
        items={equipmentFor({ cuttingOverhead: true }).map(({ code }) => ({
          code,
          word: tools.equipment[code].name,
        }))}
        ticked={failedItems}
        onChange={draft.write}
      />
      <AskedNote asked={asked} whose={name} />
      <Button kind="call" onPress={check}>
        {failedItems.length === 0 ? text.allInOrder : text.notInOrder(failedItems.length)}
      </Button>
    </Dialog>
  )
}
