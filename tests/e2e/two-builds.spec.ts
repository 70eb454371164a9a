import { expect, test, type Page } from '@playwright/test';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync
} from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { basename, dirname, extname, join } from 'node:path';
import { beginLesson } from './begin';
import { TOLD, turnByKey } from './hand';
import { visit } from './page';
import { ownFolder } from './own-folder';

test.use({ serviceWorkers: 'allow', reducedMotion: 'reduce' });

const folder = ownFolder('two-builds');
const KINDS: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json'
};
const isText = (file: string) => ['.html', '.js', '.css', '.json'].includes(extname(file));

const filesIn = (place: string): string[] =>
  readdirSync(place, { recursive: true, encoding: 'utf8' })
    .map((name) => join(place, name))
    .filter((path) => statSync(path).isFile());

/** What every page, and every part that comes later, is made of: the build that the caller made. */
function firstBuild(): string {
  const place = join(folder, 'first');
  for (const part of ['client', 'prerendered'])
    cpSync(join(process.env.FELTFOOT_BUILD ?? '', part), place, { recursive: true });
  for (const file of filesIn(place)) if (/\.(br|gz)$/.test(file)) rmSync(file);
  return place;
}

const LATER = 'z';
const hashOf = (script: string) => createHash('sha256').update(script).digest('base64');
const scriptsIn = (html: string) =>
  [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(([, script]) => script);

/** The same pages as another build would have them: none of their files bears its name of before. */
function secondBuild(first: string): string {
  const place = join(folder, 'second');
  cpSync(first, place, { recursive: true });
  const { version } = JSON.parse(readFileSync(join(first, '_app/version.json'), 'utf8'));
  const made = filesIn(join(place, '_app/immutable'));
  const names = new Set(made.map((file) => basename(file)));
  const anew = (text: string) =>
    text
      .replace(/\/([\w.-]+\.\w+)/g, (all, name) => (names.has(name) ? `/${LATER}${name}` : all))
      .replaceAll(version, `${Number(version) + 1}`);
  for (const file of filesIn(place).filter(isText)) {
    const before = readFileSync(file, 'utf8');
    const after = anew(before);
    const scripts = scriptsIn(after);
    // The content policy names the scripts of a page by their hashes.
    const allowed = scriptsIn(before).reduce(
      (html, script, i) => html.replaceAll(hashOf(script), hashOf(scripts[i])),
      after
    );
    writeFileSync(file, allowed);
  }
  for (const file of made) renameSync(file, join(dirname(file), LATER + basename(file)));
  return place;
}

let served: string;
const space = createServer((asked, answer) => {
  const path = decodeURIComponent(new URL(asked.url ?? '', 'http://space').pathname);
  const found = [path, `${path}.html`, join(path, 'index.html')]
    .map((name) => join(served, name))
    .find((file) => existsSync(file) && statSync(file).isFile());
  const type = KINDS[extname(found ?? '')] ?? 'application/octet-stream';
  answer.writeHead(found ? 200 : 404, { 'content-type': type, 'cache-control': 'no-store' });
  answer.end(found && readFileSync(found));
});
test.beforeAll(() => new Promise<void>((up) => space.listen(0, '127.0.0.1', up)));
test.afterAll(() => {
  space.closeAllConnections();
  space.close();
});
const addressOf = (path: string) =>
  `http://localhost:${(space.address() as AddressInfo).port}${path}`;

/** Whether a page runs on the files of the second build. */
const isLater = (page: Page) =>
  page
    .locator('link[rel="modulepreload"], link[rel="stylesheet"]')
    .first()
    .evaluate((link: HTMLLinkElement, sign) => link.href.split('/').at(-1)?.[0] === sign, LATER);

/** The browser looks for a new version, as it does by itself, and has it whole. */
const waits = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (!registration.waiting) await new Promise((done) => setTimeout(done, 50));
  });

test(
  'a page that is open when a new version comes goes on, its later parts too, also beside a tab of the new one',
  { tag: ['@any-width', '@long'] },
  async ({ context, page }) => {
    test.slow();
    const first = firstBuild();
    served = first;
    await visit(page, addressOf('/about'));
    await page.evaluate(() => navigator.serviceWorker.ready);
    await visit(page, addressOf('/lessons/one-foot'));
    expect(await isLater(page)).toBe(false);
    await beginLesson(page);
    await page.locator('#predict').getByRole('radio').first().check();

    served = secondBuild(first);
    await waits(page);
    await page.locator('#predict').getByRole('button', { name: 'Lock it in' }).click();
    expect(await isLater(page)).toBe(false);

    // A page that has just been opened has nothing to lose: the new version begins there.
    const tab = await context.newPage();
    await tab.goto(addressOf('/safety'));
    await expect.poll(() => isLater(tab).catch(() => false)).toBe(true);

    const lost: string[] = [];
    page.on('response', (answer) => {
      if (answer.status() >= 400) lost.push(answer.url());
    });
    // The water is fetched only now, of a version that no server has any more.
    const step = page.locator('#exactly-one-foot');
    await step.getByRole('button', { name: 'Take the rod' }).click();
    await turnByKey(step.getByRole('slider', { name: /^Rod/ }), 8);
    await expect(step.locator(TOLD)).not.toBeEmpty();
    await step.getByRole('button', { name: 'Send it' }).click();
    await expect(
      step.getByRole('dialog', { name: 'Send this try' }).getByRole('button', { name: 'Copy' })
    ).toBeVisible();
    await expect(page.getByText('This part did not load.')).toHaveCount(0);
    expect(await isLater(page)).toBe(false);
    expect(lost).toEqual([]);
    await page.reload();
    await expect.poll(() => isLater(page).catch(() => false)).toBe(true);
    await context.setOffline(true);
    await visit(tab, addressOf('/lessons'));
    expect(await isLater(tab)).toBe(true);
  }
);
