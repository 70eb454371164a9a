/** What can hurt, dearest first. Common practice; sources of law differ by place, and come first. */
export const cautions: readonly { name: string; text: string }[] = [
  {
    name: 'Hooks',
    text:
      'Everyone near a cast wears eye protection. Look behind you; in a boat, agree who casts on ' +
      'which side. A hook near an eye: shield it, do not pull, get emergency care. Never pull a ' +
      'snagged jig towards anyone, and never wrap the line round a hand.'
  },
  {
    name: 'Power lines',
    text:
      'Graphite rods conduct. Keep at least 10\u00a0ft (3\u00a0m) from overhead lines, more where it is ' +
      'required, and look up at launch ramps too.'
  },
  {
    name: 'Lightning',
    text: 'At the first thunder, rods down and to shelter. Wait 30 minutes after the last.'
  },
  {
    name: 'Falling in',
    text:
      'Wear the life jacket: most people who drown from boats wore none. Clip on the engine ' +
      'cut-off. Someone ashore knows your plan. No alcohol.'
  },
  {
    name: 'Cold water',
    text:
      'About a minute to get the breathing under control, ten minutes of useful movement, an hour ' +
      'to unconsciousness.'
  },
  {
    name: 'Lead and law',
    text:
      'Many places restrict small lead: use the alternatives, and wash your hands. Licence, ' +
      'seasons, limits. Clean, drain and dry what was in the water.'
  },
  {
    name: 'Practising ashore',
    text:
      'No hook on the line, clear overhead and all round, the phone strapped so that it cannot fly ' +
      'off. In a pool: only with the owner’s leave, and the hook point off or covered.'
  }
];
