/** Pipes, mains, pump and bypass: keys, types, reader and doubts. */
package settle.scenarios.pipes;
