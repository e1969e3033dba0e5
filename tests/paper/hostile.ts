/** Text that a user could type to break out of a page or a cell. */
export const HOSTILE = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  '</style><svg onload=alert(1)>',
  '&lt;b&gt; & <!-- -->',
  '=HYPERLINK("javascript:alert(1)","x")',
  '\u0000\u001b[31m\u0085',
] as const;
