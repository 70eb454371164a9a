import { modelPage } from '$lib/app/trust';
import type { PageLoad } from './$types';

export const load: PageLoad = () => ({ blocks: modelPage() });
