/** How far to trust what is computed here: values that others published, what guides say, known faults. */
export { default as Checks } from './Checks.svelte';
export { accessPage, errorTables, knownFaults, modelPage, tradeTable } from './documents';
export { inFeet } from './in-feet';
export { default as Markdown } from './Markdown.svelte';
export { default as TrustDetails } from './TrustDetails.svelte';
