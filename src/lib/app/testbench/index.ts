export { default as SessionEditor } from './SessionEditor.svelte';
export { demoSession, newSession } from './new-session';
export { openSessionFile, sessionFile, sessionTable } from './session-file';
