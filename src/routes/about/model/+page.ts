import { blocksOf } from '$lib/app/trust';
import model from '../../../../docs/model.md?raw';
import type { PageLoad } from './$types';

export const load: PageLoad = () => ({ blocks: blocksOf(model) });
