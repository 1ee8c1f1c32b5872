'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { SoundPanel } from '../alarm/SoundPanel'
import { MyHours } from '../history/MyHours'
import { LanguageFirst } from '../join/LanguageFirst'
import { BackToWork } from '../layout/BackToWork'
import { CrewScreen } from '../layout/CrewScreen'
import { ThemeChoice } from '../layout/ThemeChoice'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { PeopleHere } from './PeopleHere'
import { SecondDevice } from './SecondDevice'
import { SignOut } from './SignOut'
import { useTheme } from './use-theme'

/** This device: how it speaks and looks, who uses it, a second one, and out. */
export function DeviceScreen() {
  const { common, device } = useWords()
  const [theme, setTheme] = useTheme()
  const isHere = useSelect((view) => view.state?.attendance[view.me?.personId ?? ''] !== undefined)
  return (
    <CrewScreen step={<BackToWork />}>
      <h1>{device.title}</h1>
      {isHere && (
        <ButtonLink icon="house" href={routes.breakOrLeave()}>
          {device.breakOrLeave}
        </ButtonLink>
      )}
      <LanguageFirst />
      <ThemeChoice value={theme} onChange={setTheme} text={common} />
      <MyHours />
      <SoundPanel />
      <PeopleHere />
      <SecondDevice />
      <SignOut />
    </CrewScreen>
  )
}
