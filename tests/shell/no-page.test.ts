import { expect, test } from 'vitest';
import { noPageReason, type NoPageGiven } from '../../src/lib/shell/no-page';

const given: NoPageGiven = {
  status: 404,
  message: 'There is nothing here.',
  isOnline: true,
  hasServer: true,
  path: '/lesons'
};

test.each<[string, Partial<NoPageGiven>, string]>([
  ['a mistyped address', {}, 'missing'],
  [
    'a guide’s page without a connection',
    { status: 500, isOnline: false, path: '/guide' },
    'no-connection'
  ],
  [
    'a server that does not answer Chrome',
    { status: 500, message: 'Failed to fetch' },
    'no-connection'
  ],
  [
    '… nor Firefox',
    { status: 500, message: 'NetworkError when attempting to fetch resource.' },
    'no-connection'
  ],
  ['… nor Safari', { status: 500, message: 'Load failed' }, 'no-connection'],
  ['a fault', { status: 500, message: 'Something went wrong here.' }, 'broken'],
  ['a clinic in a static folder', { hasServer: false, path: '/clinic/a' }, 'no-server'],
  ['a mistyped address there', { hasServer: false, path: '/guided' }, 'missing']
])('%s is told as what it is', (_, differs, reason) => {
  expect(noPageReason({ ...given, ...differs })).toBe(reason);
});
