const NAMES =
  /^(?:(?:strip|operation|order)-\d+|fixture(?:-[\w.-]+)?|plan-view|map|map-true-size|map-outside-true-size|edges|timing|areas|ladder|hardness|readings-\d+-\d+|growth-.+)$/

/** Whether paper may have a picture of that name; a part without ports has none of theirs. */
export const isPictureName = (name: string): boolean => NAMES.test(name)
