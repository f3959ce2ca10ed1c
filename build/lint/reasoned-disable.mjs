/**
 * A lint rule: switching a rule off needs its reason behind `--`.
 * @type {import('eslint').Rule.RuleModule}
 */
export const reasonedDisable = {
  meta: {
    type: 'problem',
    schema: [],
    messages: { unreasoned: 'Say why the rule is off: {{directive}} … -- reason' },
  },
  create(context) {
    return {
      'Program:exit'() {
        for (const comment of context.sourceCode.getAllComments()) {
          const directive = /^\s*(eslint-disable(?:-next-line|-line)?)\b/.exec(comment.value)?.[1];
          if (directive === undefined || /\s--\s*\S/.test(comment.value)) continue;
          if (comment.loc) context.report({ loc: comment.loc, messageId: 'unreasoned', data: { directive } });
        }
      },
    };
  },
};
