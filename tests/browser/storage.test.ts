import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { demoPlan, planText } from '../../engine/index.ts';
import { browserSession, openUngraded, saved } from './harness.ts';

const session = browserSession();

const yardButton = (page: Page, name: string): Promise<void> =>
  page
    .getByRole('button', { name: `Yard and files: ${name}` })
    .or(page.getByRole('button', { name }))
    .first()
    .waitFor();

async function openFiles(page: Page): Promise<void> {
  await page.getByRole('button', { name: /Yard and files/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Yard and files' }).waitFor();
}

async function rename(page: Page, name: string): Promise<void> {
  const field = page.getByRole('textbox', { name: 'Name of this yard' });
  await field.fill(name);
  await field.press('Enter');
  await page.getByRole('banner').getByText(name, { exact: true }).waitFor();
}

/** Names the yard "Yard 1", "Yard 2" and so on in the field of its name, each a step of its own, a picture apart. */
async function renameOften(page: Page, times: number): Promise<void> {
  await page.getByRole('textbox', { name: 'Name of this yard' }).evaluate(async (field, last) => {
    for (let step = 1; step <= last; step++) {
      (field as HTMLInputElement).value = `Yard ${step}`;
      field.dispatchEvent(new Event('change', { bubbles: true }));
      await new Promise(requestAnimationFrame);
    }
  }, times);
  await page.getByRole('banner').getByText(`Yard ${times}`, { exact: true }).waitFor();
}

/** Takes back so many steps by the button, which each time says that it is a renaming that it takes back. */
async function undoRenames(page: Page, times: number): Promise<void> {
  await page.evaluate(async (all) => {
    for (let back = 0; back < all; back++) {
      const button = document.querySelector<HTMLElement>('[aria-label="Undo: Rename the yard"]');
      if (!button) throw new Error(`After ${back} steps taken back no renaming is left to take back.`);
      button.click();
      await new Promise(requestAnimationFrame);
    }
  }, times);
}

const give = (page: Page, name: string, text: string): Promise<void> =>
  page.getByLabel('Open a file…').setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

async function fresh(initScript?: () => void): Promise<{ context: BrowserContext; page: Page }> {
  const context = await session.context();
  if (initScript) await context.addInitScript(initScript);
  const { page } = await openUngraded(context, session.site.address);
  return { context, page };
}

test('undo and redo reach over a reload, step by named step, to the first', async () => {
  const { context, page } = await fresh();
  await openFiles(page);
  await renameOften(page, 36);
  await saved(page);
  await undoRenames(page, 3);
  await saved(page);
  await page.reload();
  await yardButton(page, 'Yard 33');
  await page.getByRole('button', { name: 'Redo: Rename the yard' }).click();
  await yardButton(page, 'Yard 34');
  await undoRenames(page, 34);
  await yardButton(page, 'The well courtyard');
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  await context.close();
});

test(
  'two tabs cannot overwrite each other: the older one turns to looking only, and can go on from the newest or ' +
    'keep its own',
  async () => {
    const { context, page: older } = await fresh();
    await saved(older);
    const { page: newer } = await openUngraded(context, session.site.address);
    await openFiles(newer);
    await rename(newer, 'Changed in the newer tab');
    await saved(newer);
    await older.getByText('look only').waitFor();
    await older.keyboard.press('Alt+1');
    await expect.poll(() => older.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
    await older.getByRole('button', { name: 'Show the newest' }).click();
    await yardButton(older, 'Changed in the newer tab');
    await openFiles(older);
    await rename(older, 'Changed in the older tab');
    await saved(older);
    await newer.getByText('look only').waitFor();
    await newer.getByRole('button', { name: 'Keep this one as a copy' }).click();
    await yardButton(newer, 'Changed in the newer tab, copy');
    await context.close();
  },
);

test('a tab that never heard of the other still cannot overwrite it', async () => {
  const { context, page: deaf } = await fresh(() => {
    Object.defineProperty(window, 'BroadcastChannel', { value: undefined });
  });
  await openFiles(deaf);
  await saved(deaf);
  const { page: other } = await openUngraded(context, session.site.address);
  await openFiles(other);
  await rename(other, 'The other tab was here');
  await saved(other);
  await rename(deaf, 'The deaf tab was here');
  await deaf.getByText('look only').waitFor();
  await other.reload();
  await yardButton(other, 'The other tab was here');
  await context.close();
});

describe('what the browser refuses is said, with a file at hand', () => {
  test('storage forbidden', async () => {
    const { context, page } = await fresh(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('no', 'SecurityError');
      };
    });
    await page
      .getByText(/does not let Shadewright keep anything/)
      .first()
      .waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a file' }).first().click();
    expect((await download).suggestedFilename()).toBe('The-well-courtyard.plan.json');
    expect(await page.getByRole('banner').getByText('saved', { exact: true }).count()).toBe(0);
    await context.close();
  });

  test('storage full', async () => {
    const { context, page } = await fresh();
    await saved(page);
    // The browser's own quota cannot be made small enough for one yard.
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await openFiles(page);
    await rename(page, 'One too many');
    await page
      .getByText(/no room left for the yard/)
      .first()
      .waitFor();
    await page.getByRole('banner').getByText('not saved').waitFor();
    await page.getByRole('button', { name: 'Save a file' }).first().waitFor();
    // Nothing that leaves the yard goes without a question.
    await page.getByRole('button', { name: 'Demo: The lane yard' }).click();
    await page
      .getByText(/This yard is not saved, so it stays open/)
      .first()
      .waitFor();
    await yardButton(page, 'One too many');
    const asked = page.waitForEvent('dialog');
    await page.close({ runBeforeUnload: true });
    const question = await asked;
    expect(question.type()).toBe('beforeunload');
    await question.accept();
    await context.close();
  });

  test('a connection that a sleeping phone closed is opened again without a word', async () => {
    const { context, page } = await fresh();
    await openFiles(page);
    await saved(page);
    await page.evaluate(() => {
      const { transaction } = IDBDatabase.prototype;
      let once = true;
      IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...args: Parameters<typeof transaction>) {
        if (once) {
          once = false;
          throw new DOMException('The database connection is closing.', 'InvalidStateError');
        }
        return transaction.apply(this, args);
      } as typeof transaction;
    });
    await rename(page, 'After the nap');
    await saved(page);
    await page.reload();
    await yardButton(page, 'After the nap');
    await context.close();
  });

  test('yards that the browser cleared', async () => {
    const { context, page } = await fresh();
    await openFiles(page);
    await page.getByRole('button', { name: 'Make a copy here' }).click();
    await yardButton(page, 'The well courtyard, copy');
    await saved(page);
    const clear = (): Promise<unknown> =>
      page.evaluate(() => new Promise((resolve) => (indexedDB.deleteDatabase('shadewright').onsuccess = resolve)));
    // With the yard still on the screen, all of it is kept again, and that is said.
    await clear();
    await rename(page, 'Kept again');
    await page
      .getByText(/This browser had cleared what it kept of this yard; it is kept again now/)
      .first()
      .waitFor();
    await saved(page);
    await page.reload();
    await yardButton(page, 'Kept again');
    await page.getByRole('button', { name: 'Undo: Rename the yard' }).waitFor();
    await clear();
    await page.reload();
    await page
      .getByText(/has cleared the yards it kept/)
      .first()
      .waitFor();
    await context.close();
  });
});

describe('files', () => {
  test('a file copy that is over a month old, of a yard changed since, is asked for anew when the yard is opened', async () => {
    const { context, page } = await fresh();
    await openFiles(page);
    await rename(page, 'Changed since');
    await saved(page);
    // As if the file had been saved 31 days ago.
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          const open = indexedDB.open('shadewright');
          open.onsuccess = () => {
            const change = open.result.transaction('records', 'readwrite');
            const store = change.objectStore('records');
            const all = store.getAllKeys(IDBKeyRange.bound('yard/', 'yard/\uffff'));
            all.onsuccess = () => {
              const [key] = all.result;
              const yard = store.get(key);
              yard.onsuccess = () => store.put({ ...yard.result, fileCopyAt: Date.now() - 31 * 86_400_000 }, key);
            };
            change.oncomplete = () => (open.result.close(), resolve(null));
          };
        }),
    );
    await page.reload();
    await page
      .getByText(/The last file copy of this yard is over a month old/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Save a file' }).first().click();
    await saved(page);
    await page.reload();
    await saved(page);
    expect(await page.getByText(/over a month old/).count()).toBe(0);
    await context.close();
  });

  test('a file out and in again is the same plan, on the shelf beside the one that was open; what is no plan is refused', async () => {
    const { context, page } = await fresh();
    await openFiles(page);
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a file' }).click();
    const chunks: Buffer[] = [];
    for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
    const text = Buffer.concat(chunks).toString('utf8');
    expect(text).toBe(planText(demoPlan('courtyard')));
    await page.getByText('Your last file copy was made just now.').waitFor();
    await give(page, 'lane.plan.json', planText({ ...demoPlan('lane'), name: 'From a file' }));
    await yardButton(page, 'From a file');
    await page.getByRole('button', { name: 'Open The well courtyard' }).click();
    await yardButton(page, 'The well courtyard');
    await page.getByText('Your last file copy was made just now.').waitFor();

    // What is no plan is refused in words, and the open yard is untouched.
    await give(page, 'notes.json', '{"hello": tru');
    await page.getByRole('heading', { name: /notes\.json could not be opened as it is/ }).waitFor();
    expect(await page.getByRole('button', { name: /Open what is sound/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'Leave it' }).click();
    await yardButton(page, 'The well courtyard');
    await context.close();
  });

  test('a file with one broken feature is opened without it when asked, and saving keeps the broken one', async () => {
    const { context, page } = await fresh();
    await openFiles(page);
    const plan = demoPlan('lane');
    const broken = {
      ...plan,
      name: 'Nearly sound',
      features: [...plan.features, { id: 'bent', kind: 'wall', path: [[1, 2]], height: -3, thickness: 0.2 }],
    };
    await give(page, 'broken.plan.json', JSON.stringify(broken));
    await page.getByRole('button', { name: 'Open what is sound (1 thing set aside)' }).click();
    await yardButton(page, 'Nearly sound');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a file' }).first().click();
    const chunks: Buffer[] = [];
    for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
    expect(Buffer.concat(chunks).toString('utf8')).toContain('"bent"');
    await context.close();
  });

  test('a stored yard whose newest state is damaged opens at the last good one', async () => {
    const { context, page } = await fresh();
    await openFiles(page);
    await rename(page, 'Whole');
    await saved(page);
    await page.reload();
    await openFiles(page);
    await rename(page, 'Damaged');
    await saved(page);
    await page.evaluate(async () => {
      const db = await new Promise<IDBDatabase>((resolve) => {
        const request = indexedDB.open('shadewright');
        request.onsuccess = () => resolve(request.result);
      });
      const store = db.transaction('records', 'readwrite').objectStore('records');
      // The newest step.
      const request = store.openCursor(IDBKeyRange.bound('steps/', 'steps/\uffff'), 'prev');
      await new Promise<void>((resolve) => {
        request.onsuccess = () => {
          const step = request.result?.value as { plan: { site: { latitude: unknown } } };
          step.plan.site.latitude = 'somewhere';
          request.result?.update(step);
        };
        store.transaction.oncomplete = () => resolve();
      });
      db.close();
    });
    await page.reload();
    await page
      .getByText(/newest state of this yard could not be read/)
      .first()
      .waitFor();
    await yardButton(page, 'Whole');
    await context.close();
  });

  test('a yard put away comes back; deleted for good only when asked twice', async () => {
    const { context, page } = await fresh();
    await openFiles(page);
    await page.getByRole('button', { name: 'Demo: The lane yard' }).click();
    await yardButton(page, 'The lane yard');
    await page.getByRole('button', { name: 'Put away The well courtyard' }).click();
    await page.getByText('Put away (1)').click();
    await page.getByRole('button', { name: 'Bring back The well courtyard' }).click();
    await page.getByRole('button', { name: 'Put away The well courtyard' }).click();
    await page.getByText('Put away (1)').click();
    await page.getByRole('button', { name: 'Delete The well courtyard for good' }).click();
    await page.getByRole('button', { name: 'Yes, delete The well courtyard for good' }).click();
    await expect.poll(() => page.getByText('The well courtyard', { exact: true }).count()).toBe(0);
    await context.close();
  });
});
