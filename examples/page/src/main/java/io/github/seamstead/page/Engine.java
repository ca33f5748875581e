package io.github.seamstead.page;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/**
 * The entry of the compiled script. It leaves a function {@code seamsteadEngine(request, reply,
 * ending)} in the global scope, JSON text in and out; what is put round it by {@link
 * io.github.seamstead.page.build.Assemble} ties that to the messages of a worker or to a function
 * for others.
 */
public final class Engine {

  private Engine() {}

  /** Takes a request and says its answers to a reply. */
  @JSFunctor
  @FunctionalInterface
  interface Handler extends JSObject {
    void answer(String request, Reply reply, Ending ending);
  }

  /** Says whether a plan is to come to an end. */
  @JSFunctor
  @FunctionalInterface
  interface Ending extends JSObject {
    boolean asked();
  }

  /** Hears an answer, a JSON text. */
  @JSFunctor
  @FunctionalInterface
  interface Reply extends JSObject {
    void say(String answer);
  }

  /**
   * Starts listening.
   *
   * @param args none
   */
  public static void main(String[] args) {
    listen((request, reply, ending) -> Answers.answer(request, reply::say, ending::asked));
  }

  @JSBody(params = "handler", script = "globalThis.seamsteadEngine = handler;")
  private static native void listen(Handler handler);
}
