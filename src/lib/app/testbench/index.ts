export { default as TestBench } from './TestBench.svelte';
export { default as SessionEditor } from './SessionEditor.svelte';
export { demoSession } from './demo-session';
export { openSessionFile, sessionFile, sessionTable } from './session-file';
