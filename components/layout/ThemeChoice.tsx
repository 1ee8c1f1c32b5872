import type { DoorMessages } from '@/lib/text/messages'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import type { Theme } from './device-choices'

type ThemeChoiceProps = {
  value: Theme
  onChange: (theme: Theme) => void
  text: DoorMessages['common']
}

const themes: readonly Theme[] = ['device', 'light', 'dark']

/** Light for sun, dark for dusk, or as the device has it. */
export function ThemeChoice({ value, onChange, text }: ThemeChoiceProps) {
  const words = { device: text.themeDevice, light: text.themeLight, dark: text.themeDark }
  return (
    <ChoiceGroup label={text.theme} as="picks">
      {themes.map((theme) => (
        <Pick
          key={theme}
          type="radio"
          name="theme"
          checked={theme === value}
          onChange={() => onChange(theme)}
        >
          {words[theme]}
        </Pick>
      ))}
    </ChoiceGroup>
  )
}
