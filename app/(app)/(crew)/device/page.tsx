import { DeviceScreen } from '@/components/day/DeviceScreen'

export default function DevicePage() {
  return <DeviceScreen />
}
