export { default as OutfitPicker } from './OutfitPicker.svelte';
export { gearNamed, outfitIn, setupWith } from './chosen';
export { FISH_CHOICES, LIGHT_CHOICES, nameOf, waterChoices, WIND_CHOICES } from './day-water';
export { CHART_BEDS } from './weight-water';
export { outfitText, UNKNOWN_TITLES, unknownText } from './outfit-words';
export { written } from './written';
export { default as WeightChart } from './WeightChartLater.svelte';
export { default as GearPage } from './GearPage.svelte';
