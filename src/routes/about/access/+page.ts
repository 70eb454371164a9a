import { accessPage } from '$lib/app/trust';
import type { PageLoad } from './$types';

export const load: PageLoad = () => ({ blocks: accessPage() });
