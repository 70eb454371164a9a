import { expect, test } from 'vitest';
import { phoneAddressOf } from '../../src/lib/server/reach';

const asked = (address: string, lan?: string) =>
  phoneAddressOf({
    url: new URL(address),
    request: new Request(address, { headers: lan === undefined ? {} : { 'x-feltfoot-lan': lan } })
  });

test.each([
  ['http://localhost:3000/clinic/x', 'http://192.168.7.4:3000'],
  ['http://127.0.0.1:3000/guide/x', 'http://192.168.7.4:3000'],
  ['http://[::1]:3000/guide/x', 'http://192.168.7.4:3000'],
  ['http://lake.example/clinic/x', 'http://lake.example'],
  ['https://10.0.0.2:8443/clinic/x', 'https://10.0.0.2:8443']
])('a phone opens what is seen at %s at %s', (seen, origin) => {
  expect(asked(seen, '192.168.7.4,10.0.0.2')).toEqual({ origin, byPhone: true });
});

test('without an address on a network it is said that no phone gets there', () => {
  for (const lan of ['', undefined]) {
    const reach = asked('http://localhost:3000/clinic/x', lan);
    expect(reach).toEqual({ origin: 'http://localhost:3000', byPhone: false });
  }
});
