package io.github.seamstead.page;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/**
 * The entry of the compiled script. In a worker it answers messages; elsewhere it leaves a function
 * {@code seamsteadEngine(request, reply)} in the global scope, JSON text in and out.
 */
public final class Engine {

  private Engine() {}

  /** Takes a request and says its answers to a reply. */
  @JSFunctor
  @FunctionalInterface
  interface Handler extends JSObject {
    void answer(String request, Reply reply);
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
    listen((request, reply) -> Answers.answer(request, reply::say));
  }

  @JSBody(
      params = "handler",
      script =
          "globalThis.seamsteadEngine = handler;"
              + "if (typeof WorkerGlobalScope !== 'undefined') {"
              + "  globalThis.onmessage = function(event) {"
              + "    handler(JSON.stringify(event.data), function(answer) {"
              + "      globalThis.postMessage(JSON.parse(answer));"
              + "    });"
              + "  };"
              + "}")
  private static native void listen(Handler handler);
}
