/** A picture of the handful at the kettle (invented): made smaller, kept, copied, and taken out again. */
import { PNG } from 'pngjs'
import { expect, test } from 'vitest'
import { entriesOnServer } from './hark-lake.ts'
import { describeAtHome, openPage } from './harness.ts'
import { tellPlannedBatch } from './told-batch.ts'
import { joinBook } from './told-books.ts'

/** As large as a telephone's camera makes them. */
function cameraPicture(): Buffer {
  const png = new PNG({ width: 3000, height: 2000 })
  for (let at = 0; at < png.data.length; at += 4) {
    png.data[at] = (at / 40) % 256
    png.data[at + 1] = (at / 12_000) % 256
    png.data[at + 3] = 255
  }
  return PNG.sync.write(png)
}

describeAtHome('a picture at the kettle', (home) => {
  test('is made smaller, kept over a reload, copied to the house server, and taken out again', async () => {
    const { context, page, faults } = await openPage(home.browser)
    const book = await tellPlannedBatch(home.house, Date.now())
    await joinBook(page, home.house, book)
    await page.goto(`${home.house.url}kettle/${book.batchId}`)

    const field = page.getByLabel('Take a picture')
    await field.setInputFiles({ name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') })
    await page.getByText('no picture that this device can read').waitFor()
    await field.setInputFiles({ name: 'handful.png', mimeType: 'image/png', buffer: cameraPicture() })
    const picture = page.getByRole('img', { name: /^Picture of \d/ })
    await picture.waitFor()
    await page.reload()
    await picture.waitFor()
    // Too much is in it for 1,280 px: the next size fits.
    await expect
      .poll(() => picture.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight]))
      .toEqual([1024, 683])

    const isPhoto = ({ envelope }: { envelope: { kind: string } }) => envelope.kind === 'photo-taken'
    await expect
      .poll(async () => (await entriesOnServer(home.house)).filter(isPhoto).length, { timeout: 60_000 })
      .toBe(1)
    const [kept] = (await entriesOnServer(home.house)).filter(isPhoto)
    const told = kept!.body!.value as { image: string; ofId: string }
    expect(told.ofId).toBe(book.batchId)
    const bytes = Buffer.from(told.image, 'base64')
    expect(bytes.subarray(0, 3).toString('hex')).toBe('ffd8ff')
    expect(bytes.includes('Exif')).toBe(false)

    await page.getByRole('button', { name: 'Take this picture out' }).click()
    await picture.waitFor({ state: 'detached' })
    expect(faults).toEqual([])
    await context.close()
  })
})
