import { expect, test } from 'vitest';
import { nearText } from '../../src/lib/connection/reach';

const network = 'Works for phones on this network only.';
const device = 'This link works on this device only.';

test.each([
  ['http://10.0.0.7:3000/guide/task#a', network],
  ['http://192.168.7.4:3000/guide/task#a', network],
  ['http://172.16.0.1/x', network],
  ['http://172.31.9.9/x', network],
  ['http://192.0.2.2:8123/x', network],
  ['http://lake.local:3000/x', network],
  ['http://localhost:3000/x', device],
  ['http://127.0.0.1/x', device],
  ['http://[::1]:3000/x', device],
  ['http://172.32.0.1/x', ''],
  ['http://192.169.7.4/x', ''],
  ['https://local.example/x', ''],
  ['https://10.example/x', ''],
  ['', '']
])('of the link %s is said “%s”', (link, text) => expect(nearText(link)).toBe(text));
