import { withAnotherHost } from './support/another-host'
import { expect, type Page, routes, test } from './support/test'

const heads =
  'Bloque;Hilera;Árbol;Especie;Variedad;Año de plantación;Diámetro (cm);Altura (m);Línea eléctrica'
const rows = Array.from(
  { length: 20 },
  (_, index) =>
    `Ladera Norte;${1 + Math.floor(index / 10)};${1 + (index % 10)};Manzano;Verde Doncella;2008;18,5;2,3;${index === 14 ? 'sí' : ''}`
)

test('a spreadsheet in Spanish, with decimal commas, becomes a dealt row', async ({ asPerson }) => {
  const began = Date.now()
  const mo = await asPerson('Mo', { device: 'desktop', language: 'es' })
  await mo.goto(routes.bringIn())
  const choose = async (lines: readonly string[]) => {
    // As a spreadsheet program in Spain saves it.
    const buffer = Buffer.from([heads, ...lines].join('\r\n'), 'latin1')
    const choosing = mo.waitForEvent('filechooser')
    await mo.getByRole('button', { name: 'Elegir un archivo' }).click()
    await (await choosing).setFiles({ name: 'huerto.csv', mimeType: 'text/csv', buffer })
  }

  await choose([...rows, 'Ladera Norte;3;1;Manzano;;1,5;;;'])
  await expect(mo.getByRole('heading', { name: '1 fila por corregir' })).toBeVisible()
  await expect(mo.getByText('Año de plantación es «1,5»')).toBeVisible()
  await expect(mo.getByRole('button', { name: 'Traer 20 árboles' })).toHaveAttribute(
    'aria-disabled'
  )
  await mo.locator('label').filter({ hasText: 'Dejar fuera la fila que está mal' }).click()
  await expect(mo.getByRole('button', { name: 'Traer 20 árboles' })).not.toHaveAttribute(
    'aria-disabled'
  )
  await mo.getByRole('button', { name: 'Otro archivo' }).click()
  await choose(rows)
  await expect(mo.getByRole('combobox', { name: 'Diámetro (cm)' })).toHaveValue('trunk_cm')
  await mo.getByRole('button', { name: 'Traer 20 árboles' }).click()
  await mo.getByRole('button', { name: 'Marcar 1 árbol' }).click()
  await expect(mo.getByText('1 árbol está marcado.')).toBeVisible()

  await mo.goto(routes.map(37))
  await mo.getByRole('button', { name: 'Elegir lo que falta de la fila 1' }).click()
  const bar = mo.getByRole('region', { name: 'Elegir para asignar' })
  await bar.locator('label').filter({ hasText: 'Ann' }).first().click()
  // The power line that the file knew of keeps three trees of the next row closed.
  await bar.getByRole('button', { name: 'Asignar 7 a Ann' }).click()
  await expect(mo.getByText('7 árboles están asignados a Ann.')).toBeVisible()

  expect(Date.now() - began).toBeLessThan(180_000)
})

test('an orchard taken out comes into another Rowcall just as it was', async ({
  orchard,
  asPerson,
  asNewcomer,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const mo = await asPerson('Mo', { device: 'desktop' })
  const before = snapshotIn(mo)
  await mo.goto(routes.takeOut())
  const downloading = mo.waitForEvent('download')
  await mo.getByRole('button', { name: 'Take the archive out' }).click()
  const archive = await (await downloading).path()

  await withAnotherHost(async ({ address, code }) => {
    const there = await asNewcomer({ device: 'desktop' })
    await there.goto(`${address}${routes.setUp(code)}`)
    await there.getByRole('button', { name: 'I have an archive of an orchard' }).click()
    const choosing = there.waitForEvent('filechooser')
    await there.getByRole('button', { name: 'Choose the archive' }).click()
    await (await choosing).setFiles(archive)
    await expect(there.getByRole('combobox', { name: 'Who are you?' })).toContainText('Mo')
    const after = snapshotIn(there)
    await there.getByRole('button', { name: 'Bring it in' }).click()
    await expect(there).toHaveURL(`${address}${routes.board()}`)

    const { epoch, channelEpoch, ...same } = await after
    const { epoch: itsEpoch, channelEpoch: _, ...was } = await before
    expect(same).toEqual(was)
    expect(epoch).not.toBe(itsEpoch)
    expect(channelEpoch).toBeGreaterThan(0)
    // Before its host ends, and it would complain.
    await there.close()
  })
})

/** What the referee tells this page when it opens. */
async function snapshotIn(page: Page): Promise<Record<string, unknown>> {
  const answer = await page.waitForResponse(/\/rpc\/snapshot$/)
  return answer.json()
}
