import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import JoinForm from '../../../src/lib/app/clinic/JoinForm.svelte';
import type { Participant } from '../../../src/lib/app/clinic/participant.svelte';
import { newPlace, withAnswer, type Place } from '../../../src/lib/app/clinic/place';

const place = newPlace('YETA8K', 'a-token-of-this-phone');
const answered = withAnswer(place, { kind: 'vote', id: 'v1', part: 'p1', option: 'b' });
const coming = (place: Place) => ({ coming: place, isForgotten: false }) as Participant;
const says = page.getByText('What you answered is kept here. It’s sent once you’re in.');

test('a phone reloaded without a connection says that its answer waits', async () => {
  const { rerender } = await render(JoinForm, { seat: coming(place), code: '' });
  await expect.element(page.getByText('Joining YETA8K.')).toBeVisible();
  await expect.element(says).not.toBeInTheDocument();
  await rerender({ seat: coming(answered) });
  await expect.element(says).toBeVisible();
});
