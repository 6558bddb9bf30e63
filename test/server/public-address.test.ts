import { expect, it } from 'vitest';
import { readPublicAddress } from '../../src/server/platform/public-address.js';
import { create, House } from '../accounts/house.js';
import { draftFor, makePacket, plantedIncident } from '../hand-over/packet-desk.js';

const read = (text: string | undefined): [string | null, string[]] => {
  const faults: string[] = [];
  return [readPublicAddress({ PUBLIC_ADDRESS: text }, faults), faults];
};

it.each([
  [undefined, null],
  ['', null],
  ['https://desk.example.com', 'https://desk.example.com'],
  ['https://desk.example.com:8443/', 'https://desk.example.com:8443'],
  ['http://localhost:8080', 'http://localhost:8080'],
])('is read from %j', (text, address) => {
  expect(read(text)).toEqual([address, []]);
});

it.each(['http://desk.example.com', 'desk.example.com', 'https://desk.example.com/collect', 'https://a b'])(
  'is not %j: a link that strangers open goes by HTTPS to the front of the desk',
  (text) => {
    expect(read(text)).toEqual([null, [expect.stringContaining('PUBLIC_ADDRESS is "')]]);
  },
);

it('is needed to send a link, and nothing that a request says takes its place', async () => {
  const house = await House.open('sqlite', { publicAddress: null });
  try {
    const manager = await house.signedIn('manager');
    const incident = await plantedIncident(manager, house.now());
    const { id } = await makePacket(manager, incident, draftFor('insurer'));
    const path = `/api/incidents/${incident}/packets/${id}/links`;
    const sent = { to: 'Kim Ortega', address: 'claims@insurer.example' };
    const refused = await create(manager, path, sent).set('Host', 'evil.example').expect(409);
    expect(JSON.stringify(refused.body)).toContain('PUBLIC_ADDRESS');
  } finally {
    await house.close();
  }
});
