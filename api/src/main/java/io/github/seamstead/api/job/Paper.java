package io.github.seamstead.api.job;

/** The paper that a job's book is made for. */
public enum Paper {
  /** 210 by 297 mm, ISO 216. */
  A4,
  /** 8 1/2 by 11 inches. */
  LETTER
}
