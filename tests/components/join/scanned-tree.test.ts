import { beforeEach, expect, test, vi } from 'vitest'

import { keepScannedTree, takeScannedTree } from '@/components/join/scanned-tree'

const minuteMs = 60_000

beforeEach(() => {
  const kept = new Map<string, string>()
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
    removeItem: (key: string) => kept.delete(key),
  })
})

test('a scanned tree is there once, after joining', () => {
  expect(keepScannedTree('/tree/128', 0)).toBe(128)

  expect(takeScannedTree(5 * minuteMs)).toBe('/tree/128')
  expect(takeScannedTree(5 * minuteMs)).toBeNull()
})

test('half an hour later nobody wants it any more', () => {
  keepScannedTree('/tree/128', 0)

  expect(takeScannedTree(31 * minuteMs)).toBeNull()
})

test.each(['/', '/next', '/tree/0', '/tree/12/flag', '/tree/1e3', '/tree/-4'])(
  '%s is no tree',
  (path) => {
    expect(keepScannedTree(path, 0)).toBeNull()
    expect(takeScannedTree(0)).toBeNull()
  }
)

test.each(['{', 'null', '[]', '{"tree":"../x","at":0}', '{"tree":3}'])(
  'what somebody else left there (%s) leads nowhere',
  (left) => {
    localStorage.setItem('rowcall-scanned-tree', left)

    expect(takeScannedTree(0)).toBeNull()
  }
)
