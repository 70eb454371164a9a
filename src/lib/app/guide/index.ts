export { default as ClientPicker } from './ClientPicker.svelte';
export { default as ClientRow } from './ClientRow.svelte';
export { default as Door } from './Door.svelte';
export { default as KeepKey } from './KeepKey.svelte';
export { default as OpenClinic } from './OpenClinic.svelte';
export { default as Passkeys } from './Passkeys.svelte';
export { adviceWords, errorWords } from './advice';
export {
  type Asked,
  DEPTHS_M,
  FISH,
  type OwnGear,
  TEMPERATURES_C,
  WINDS,
  addressFor,
  askedIn,
  clientIn,
  gearFor,
  offeredWith
} from './asked';
export { briefly, homeworkText, inOrder, isDone, pageOf } from './clients';
export { MANY_NAMES, sharedNames } from './find';
export { keepFresh } from './fresh';
export { secretIn } from './key-file';
export { reasonsOf } from './reasons';
