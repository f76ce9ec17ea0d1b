/** Emitters: keys and types. */
package settle.scenarios.emitter;
