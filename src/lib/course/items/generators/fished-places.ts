/** Where one may be said to fish, whatever the season: nothing is asked about them. */
export const FISHED_PLACES = [
  'a main-lake point',
  'a channel bend',
  'an offshore hump',
  'a long gravel flat',
  'a ledge',
  'a creek mouth',
  'a roadbed',
  'a rock pile',
  'a bluff end',
  'a saddle between two islands',
  'a ditch',
  'an old pond dam'
];
