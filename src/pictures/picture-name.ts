const NAMES =
  /^(?:(?:strip|operation|order)-\d+|fixture(?:-[\w.-]+)?|plan-view|map|map-true-size|map-outside-true-size|edges|timing|areas|ladder|hardness)$/

/** Whether a packet may have a picture of that name; a part without ports has none of theirs. */
export const isPictureName = (name: string): boolean => NAMES.test(name)
