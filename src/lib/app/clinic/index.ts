export { default as BigScreen } from './lead/BigScreen.svelte';
export { default as ClinicHome } from './home/HomePage.svelte';
export { default as LeaderView } from './lead/LeaderView.svelte';
export { default as Pad } from './rod/Pad.svelte';
export { Participant } from './participant.svelte';
export { default as Phone } from './Phone.svelte';
export { RemoteRod } from './rod/remote-rod.svelte';
export { default as SummaryPage } from './SummaryPage.svelte';
