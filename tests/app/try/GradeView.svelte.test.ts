import { describe, expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import type { Grade } from '../../../src/lib/scoring';
import GradeView from '../../../src/lib/app/try/GradeView.svelte';

const feedback = {
  did: 'The tip went 2 ft and the bait 1 ft 9 in.',
  why: 'It left the bottom at 0.4 s.',
  change: 'Pull evenly. Move the tip 1 ft 1 in slowly, in about 2 s.'
};

function grade(travelMarks: number, done = 1): Grade {
  const marks = travelMarks + 28;
  return {
    call: null,
    reeledFirst: { line_m: 0, drawn_m: 0 },
    marks,
    passed: marks >= 75,
    done,
    figure: 0.5334,
    goals: [
      {
        goal: { kind: 'travel', target_m: 0.3048, band_m: 0.0508, weight: 60 },
        value: 0.5334,
        met: travelMarks / 60,
        share: travelMarks / 60,
        marks: travelMarks,
        outOf: 60
      },
      {
        goal: { kind: 'contact', least: 0.9, weight: 40 },
        value: 0.83,
        met: 0.7,
        share: 0.7,
        marks: 28,
        outOf: 40
      }
    ]
  };
}

/** Figures come on demand. */
const openMarks = () => page.getByText('How the marks add up').click();

describe('the grade', () => {
  test('of a try that is not counted tells what to change, and no marks', async () => {
    await render(GradeView, { grade: grade(15), feedback, units: 'imperial', isAtStake: false });
    await expect.element(page.getByText('Not counted: you could see it.')).toBeVisible();
    await expect.element(page.getByText(feedback.change)).toBeVisible();
    await expect.element(page.getByText('of 100')).not.toBeInTheDocument();
    await expect.element(page.getByText('How the marks add up')).not.toBeInTheDocument();
  });

  test.each([
    [grade(15), '100 − 45 − 12 = 43'],
    [{ ...grade(60), call: null }, '100 − 12 = 88'],
    [
      { ...grade(15), marks: 27, call: { share: 0.2, lost: 16 } as never },
      '100 − 45 − 12 − 16 = 27'
    ]
  ])('adds up to its marks, %#', async (given, added) => {
    await render(GradeView, { grade: given, feedback, units: 'imperial' });
    await openMarks();
    await expect.element(page.getByRole('row', { name: /^Left/ })).toHaveTextContent(added);
  });

  test('on a small screen brings into view how the marks add up, once it is unfolded', async () => {
    const { container } = await render(GradeView, {
      grade: grade(15),
      feedback,
      units: 'imperial'
    });
    container.style.cssText = 'height: 200px; overflow: auto';
    await openMarks();
    const lastRow = page.getByRole('row').last();
    await expect
      .poll(() => lastRow.element().getBoundingClientRect().bottom)
      .toBeLessThanOrEqual(container.getBoundingClientRect().bottom + 1);
  });

  test('shows the marks, what passes, and the three sentences', async () => {
    await render(GradeView, { grade: grade(15), feedback, units: 'imperial' });
    await expect.element(page.getByText('43 of 100')).toBeVisible();
    await expect.element(page.getByText('Not yet: you need 75')).toBeVisible();
    for (const sentence of [feedback.did, feedback.why, feedback.change]) {
      await expect.element(page.getByText(sentence)).toBeVisible();
    }
  });

  test('says passed when every figure came out as asked', async () => {
    const whole = grade(60);
    const goals = whole.goals.map((one) => ({ ...one, met: 1 }));
    await render(GradeView, { grade: { ...whole, goals }, feedback, units: 'imperial' });
    await expect.element(page.getByText('Passed')).toBeVisible();
  });

  test('keeps no room for what to change where there is nothing', async () => {
    await render(GradeView, {
      grade: grade(60),
      feedback: { ...feedback, change: '' },
      units: 'imperial'
    });
    await expect.element(page.getByText(feedback.did)).toBeVisible();
    expect(document.querySelector('.change')).toBeNull();
  });

  test('says that a pass was not clean when a figure is outside what was asked', async () => {
    await render(GradeView, { grade: grade(50), feedback, units: 'imperial' });
    await expect.element(page.getByText('Passed, but not clean')).toBeVisible();
    await expect.element(page.getByText('Passed', { exact: true })).not.toBeInTheDocument();
    await expect.element(page.getByText(/Not yet/)).not.toBeInTheDocument();
  });

  test('tells who passed, and not clean, the whole fix at once', async () => {
    await render(GradeView, { grade: grade(50), feedback, units: 'imperial' });
    await expect.element(page.getByText(feedback.change)).toBeVisible();
    await openMarks();
    expect(page.getByText(feedback.change).elements()).toHaveLength(1);
  });

  test('shows each goal: what was asked, what was reached and what it cost', async () => {
    await render(GradeView, { grade: grade(15), feedback, units: 'imperial' });
    await openMarks();
    const travel = page.getByRole('row', { name: /Travel/ });
    await expect.element(travel).toHaveTextContent(/10\sin to 1\sft\s2\sin/);
    await expect.element(travel).toHaveTextContent(/1 ft 9 in/);
    await expect.element(travel).toHaveTextContent(/costs 45 of 100$/);
    const contact = page.getByRole('row', { name: /On the bottom/ });
    await expect.element(contact).toHaveTextContent(/costs 12 of 40$/);
  });

  test('shows first what is out of all marks, as it counts first', async () => {
    const given = grade(15);
    const goals = given.goals.toReversed();
    await render(GradeView, { grade: { ...given, goals }, feedback, units: 'imperial' });
    await openMarks();
    const rows = page
      .getByRole('rowheader')
      .elements()
      .map((one) => one.textContent);
    expect(rows).toEqual([
      expect.stringMatching(/^Travel/),
      expect.stringMatching(/^On the bottom/),
      'Left'
    ]);
  });

  test('says that a wrong call comes off last, and whole', async () => {
    const call = { guess: { kind: 'down', isDown: true }, share: 0, lost: 30 } as const;
    await render(GradeView, { grade: { ...grade(15), call }, feedback, units: 'imperial' });
    await openMarks();
    await expect.element(page.getByText('A wrong call comes off last, whole.')).toBeVisible();
  });

  test('says of a wrong call that found less to take that it was wrong, and why it cost less', async () => {
    const call = { guess: { kind: 'down', isDown: true }, share: 0, lost: 0 } as const;
    const given = grade(15);
    const goals = given.goals.slice(0, 1);
    await render(GradeView, { grade: { ...given, goals, call }, feedback, units: 'imperial' });
    await openMarks();
    const row = page.getByRole('row', { name: /Your call/ });
    await expect.element(row).toHaveTextContent(/wrong.*costs 0 of 30$/);
    await expect
      .element(page.getByText('A wrong call comes off last: only what’s left.'))
      .toBeVisible();
  });

  test('says beside the call how near is right, as beside each goal', async () => {
    const call = { guess: { kind: 'travel', travel_m: 0.3 }, share: 0, lost: 30 } as const;
    await render(GradeView, { grade: { ...grade(15), call }, feedback, units: 'imperial' });
    await openMarks();
    const row = page.getByRole('row', { name: /Your call/ });
    await expect.element(row).toHaveTextContent(/within 2\sin/);
  });

  test('what was kept adds no marks to a try that missed', async () => {
    const half = grade(30, 0.5);
    const [travel, contact] = half.goals;
    const kept = { ...contact, met: 1, marks: 20 };
    await render(GradeView, {
      grade: { ...half, marks: 50, goals: [travel, kept] },
      feedback,
      units: 'imperial'
    });
    await openMarks();
    const row = page.getByRole('row', { name: /On the bottom/ });
    await expect.element(row).toHaveTextContent(/costs 0 of 40$/);
    await expect
      .element(page.getByRole('row', { name: /Travel/ }))
      .toHaveTextContent(/costs 50 of 100$/);
  });

  test('follows the learner’s units', async () => {
    await render(GradeView, { grade: grade(15), feedback, units: 'metric' });
    await openMarks();
    await expect.element(page.getByRole('row', { name: /Travel/ })).toHaveTextContent(/53 cm/);
  });
});
