/**
 * Exercises whose numbers are drawn from a seed, answers that are judged step by step, and answers
 * that stay hidden until asked for.
 *
 * <p>Everybody takes a seed of their own and so has numbers of their own; the same seed gives the
 * same numbers on every machine and every release of Java. A solution is written as a graph of
 * quantities, so that the worked solution which is shown is the one that judges.
 *
 * <p>An exercise changes nothing while it is used and belongs to no thread; all classes are
 * immutable.
 */
@NullMarked
package org.skewback.lesson;

import org.jspecify.annotations.NullMarked;
