/** What the reader of a result should know, in codes and numbers; words are given to it outside. */
package settle.sim.notice;
