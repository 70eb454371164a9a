export { default as OutfitPicker } from './OutfitPickerLater.svelte';
export { gearNamed, outfitIn, setupWith } from './chosen';
export {
  FISH_CHOICES,
  LIGHT_CHOICES,
  nameOf,
  temperatureChoices,
  WIND_CHOICES,
  windText
} from './day-water';
export { inLevelWater, inWater, waterIn } from './water-now';
export { default as WaterField } from './WaterField.svelte';
export { overGround } from './over-ground';
export { outfitText, UNKNOWN_SAYS, UNKNOWN_TITLES, unknownText } from './outfit-words';
export { written } from './written';
export { default as WeightChart } from './WeightChartLater.svelte';
export { default as GearPage } from './GearPage.svelte';
