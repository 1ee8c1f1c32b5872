/** The three devices that people of an orchard hold. */

import type { BrowserContextOptions } from '@playwright/test'

export const devices = {
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true },
  desktop: { viewport: { width: 1440, height: 900 } },
} satisfies Record<string, BrowserContextOptions>

export type DeviceName = keyof typeof devices
