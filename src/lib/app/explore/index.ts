export { default as Chart } from './Chart.svelte';
export { AXES, exploredScenario, type AxisName, type ExploreBase } from './axes';
export { ChartRun, type ChartPoint } from './chart-run.svelte';
export { chartCsv, FIGURE_NAMES, figureText, type FigureName } from './figures';
