import { describe, expect, it } from 'vitest';
import { element, escaped } from '../../../src/report/papers/markup.ts';

describe('markup', () => {
  it('shows what a person typed as text, whatever it looks like', () => {
    expect(element('p', { title: '"x" & <y>' }, '<img src=x onerror="alert(1)">').html).toBe(
      '<p title="&quot;x&quot; &amp; &lt;y&gt;">&lt;img src=x onerror=&quot;alert(1)&quot;&gt;</p>',
    );
  });

  it('leaves out characters that no document may hold', () => {
    expect(escaped('a\u0000b\ufffec\nd')).toBe('abc\nd');
  });

  it('closes elements that hold nothing, and leaves out attributes that are null', () => {
    expect(element('td', { class: null }, element('br'), null, ['a', 1]).html).toBe('<td><br/>a1</td>');
  });
});
