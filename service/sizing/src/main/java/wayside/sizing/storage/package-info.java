/** The battery: what a chemistry gives, what cold and high currents take, how charge goes in, how large it must be. */
package wayside.sizing.storage;
