export { default as WhatIf } from './WhatIf.svelte';
